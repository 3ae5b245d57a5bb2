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

    It 'joins a ledger that survived the loss of marks, and lists what vanished' {
        $folder = Join-Path $TestDrive ([guid]::NewGuid())
        $path = Copy-Fixture groups-nested (Join-Path $folder 'hero.psd')
        Get-LayerFile $path | Set-Layer -LayerNumber 7 -Mark Green | Set-Layer -Name Body -Mark Red | Export-LayerLedger > $null
        $plain = Get-LayerFile $path | Rename-Layer -LayerNumber 7 -NewName Face | Remove-Layer -Name Body
        $status = $plain | Get-LayerStatus -Ledger
        $status | ForEach-Object { "$($_.LayerNumber) $($_.LayerPath) $($_.State) $($_.MatchedBy) $($_.Done)" } | Should -Be @(
            '3 Figure/Arm L/Arm L Open Path False', '6 Figure/Head/Eye L/Eye L Open Path False', '7 Figure/Head/Face Done Fingerprint True', '0 Figure/Body Missing None ')
        $status | Out-String -Width 120 | Should -Match '7\s+Figure/Head/Face\s+done\s+fingerprint'
        $status | Out-String -Width 120 | Should -Match '\n\s+Figure/Body\s+missing'
        ($plain | Get-LayerStatus -Ledger -Name Face).State | Should -Be 'Done'
        ($plain | Get-LayerStatus)[0].PSObject.Properties.Name | Should -Not -Contain 'MatchedBy'
    }

    It 'takes ledgers and folders that are named, and says so where one is not there' {
        $file | Set-LayerStatus Done -Name Body -LedgerPath (Join-Path $TestDrive anna) > $null
        ($file | Get-LayerStatus -LedgerPath (Join-Path $TestDrive anna) -Name Body).State | Should -Be 'Done'
        { $file | Get-LayerStatus -LedgerPath (Join-Path $TestDrive none.json) -ErrorAction Stop } | Should -Throw '*no such file*'
        ($file | Get-LayerStatus -Ledger).State | Should -Be $null, $null, $null, $null
    }

    It 'takes the meaning of marks from a profile' {
        $profilePath = Join-Path $TestDrive 'blue.layerprofile.json'
        Set-Content -LiteralPath $profilePath -Value '{ "name": "blue", "marks": { "blue": "done", "green": "recheck" } }'
        $marked = $file | Set-Layer -Name Body -Mark Blue | Set-Layer -LayerNumber 7 -Mark Green
        ($marked | Get-LayerStatus -Profile $profilePath | Where-Object Done).Name | Should -Be 'Body'
        ($marked | Get-LayerStatus -Ledger -Profile $profilePath).State | Should -Be 'Open', 'Open', 'Recheck', 'Done'
    }
}
