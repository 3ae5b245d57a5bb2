BeforeAll {
    Import-Module "$PSScriptRoot/Support/Samples.psm1" -Force
    $ErrorActionPreference = 'Continue'
}

Describe 'Get-LayerStatus' {
    BeforeEach {
        $file = Get-LayerFile (Copy-Fixture groups-nested (Join-Path $TestDrive 'hero.psd'))
    }

    It 'tells for each part whether it is done, pending edits included' {
        $file | Set-Layer -LayerNumber 7 -Mark Green | Get-LayerStatus | ForEach-Object { "$($_.LayerPath) $($_.Done)" } | Should -Be @(
            'Figure/Arm L/Arm L False', 'Figure/Head/Eye L/Eye L False', 'Figure/Head/Head True', 'Figure/Body False')
    }

    It 'says nothing about what is done in a file without marks' {
        $status = $file | Get-LayerStatus
        $status.Done | Should -Be $null, $null, $null, $null
        $status | Out-String -Width 120 | Should -Match 'Figure/Body\s+not known'
    }

    It 'takes other marks, and names where marks were lost' {
        ($file | Set-Layer -Name Body -Mark Blue | Get-LayerStatus -DoneMark Green, Blue | Where-Object Done).Name | Should -Be 'Body'
        $plain = Get-LayerFile $file.Path
        ($plain | Get-LayerStatus -DoneName '^he' | Where-Object Done).Name | Should -Be 'Head'
        { $plain | Get-LayerStatus -DoneName '(' } | Should -Throw '*not a regular expression*'
    }

    It 'tells sides whose opposite is missing' {
        ($file | Get-LayerStatus | Where-Object MissingOpposite).Name | Should -Be 'Arm L', 'Eye L'
        ($file | Copy-LayerMirror | Get-LayerStatus | Where-Object MissingOpposite) | Should -BeNullOrEmpty
    }

    It 'takes layers, and filters' {
        ($file | Get-Layer -LiteralLayerPath 'Figure/Head' | Get-LayerStatus).Count | Should -Be 2 -Because 'a group stands for what is in it'
        ($file | Get-LayerStatus -Name Body).LayerPath | Should -Be 'Figure/Body'
    }

    It 'sets backdrops apart' {
        $status = $file | Rename-Layer -Name Body -NewName backdrop | Get-LayerStatus -Name backdrop
        "$($status.IsPart) $($status.Role)" | Should -Be 'False Backdrop'
    }

    It 'goes on after a file whose pixels cannot be read' {
        $damaged = Join-Path $TestDrive 'damaged.psd'
        [IO.File]::Copy("$PSScriptRoot/../Fixtures/damaged/rectangle-huge.psd", $damaged, $true)
        $result = Get-Streams { Get-LayerFile $damaged, $file.Path | Get-LayerStatus }
        $result.Errors.Count | Should -Be 1
        $result.Output.Count | Should -Be 4
    }
}
