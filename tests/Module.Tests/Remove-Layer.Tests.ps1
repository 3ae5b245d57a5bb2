BeforeAll {
    Import-Module "$PSScriptRoot/Support/Samples.psm1" -Force
    $ErrorActionPreference = 'Continue'
}

Describe 'Remove-Layer' {
    BeforeEach {
        $file = Get-LayerFile (Copy-Fixture groups-nested (Join-Path $TestDrive 'hero.psd'))
    }

    It 'removes a group with all that is in it, and passes the file on' {
        $out = $file | Remove-Layer -LiteralLayerPath 'Figure/Head'
        $out.LayerCount | Should -Be 4
        ($file | Get-Layer).LayerPath | Should -Be 'Figure', 'Figure/Arm L', 'Figure/Arm L/Arm L', 'Figure/Body'
        $file.Changes.Count | Should -Be 4
    }

    It 'takes layers and passes none on' {
        $file | Get-Layer -Leaf | Remove-Layer | Should -BeNullOrEmpty
        ($file | Get-Layer).Kind | Select-Object -Unique | Should -Be 'Group'
    }

    It 'is written by a save' {
        $file | Remove-Layer -Name Body | Save-LayerFile -InPlace > $null
        (Get-Layer $file.Path -Name Body) | Should -BeNullOrEmpty
    }

    It 'refuses a file without a choice' {
        $result = Get-Streams { $file | Remove-Layer }
        $result.Errors[0].FullyQualifiedErrorId | Should -BeLike 'SelectionMissing,*'
        $result.Output | Should -BeNullOrEmpty
        $file.LayerCount | Should -Be 8
    }

    It 'leaves a file alone in which nothing fits' {
        ($file | Remove-Layer -Name Nobody).PendingCount | Should -Be 0
    }

    It 'refuses a layer that is gone' {
        $body = $file | Get-Layer -Name Body
        $body | Remove-Layer
        (Get-Streams { $body | Set-Layer -Mark Red }).Errors[0].FullyQualifiedErrorId | Should -BeLike 'LayerWithoutFile,*'
    }

    It 'changes nothing with -WhatIf' {
        ($file | Remove-Layer -Name Body -WhatIf).LayerCount | Should -Be 8
        ($file | Get-Layer -Name Body | Remove-Layer -WhatIf).Name | Should -Be 'Body'
    }
}
